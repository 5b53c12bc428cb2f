import { readFileSync } from "node:fs";

// The build itself fails where a package that ships is not under a permissive licence.
const list = readFileSync("dist/licences.txt", "utf8");
const { dependencies } = JSON.parse(readFileSync("package.json", "utf8")) as {
  dependencies: Record<string, string>;
};

test.each([...Object.entries(dependencies), ["@univerjs/core", "0.25.1"], ["react", "19.3.1"]])(
  "%s %s ships, and its licence is listed",
  (name, version) => {
    expect(list).toMatch(new RegExp(`^${name} ${version} \\([\\w.-]+\\)$`, "m"));
  },
);

test("our own licence comes first", () => {
  expect(list.startsWith("Fresh Concrete Functions\n\n")).toBe(true);
  expect(list).toContain(readFileSync("LICENSE", "utf8").trim().split("\n")[0]);
});

test("every licence is named", () => {
  expect(list).not.toMatch(/\((?:undefined|not named|UNLICENSED)\)/);
});
