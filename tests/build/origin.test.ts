import { readFileSync } from "node:fs";
import { addressFrom } from "../../build/origin.mjs";
import { addressOfPage, manifestFor } from "../../src/start-page/manifest-for";

test.each([
  [undefined, undefined],
  ["https://tests.example.org", "https://tests.example.org"],
  ["https://tests.example.org/", "https://tests.example.org"],
  ["https://tests.example.org:8443", "https://tests.example.org:8443"],
  ["https://example.org/fresh", "https://example.org/fresh"],
  ["https://example.org/concrete/fresh/", "https://example.org/concrete/fresh"],
])("an origin given as %s is %s", (given, address) => {
  expect(addressFrom(given)).toBe(address);
});

test.each(["http://tests.example.org", "https://example.org/?a=1", "example.org", "", true])(
  "an origin given as %s is refused",
  (given) => {
    expect(() => addressFrom(given)).toThrow("Give the https address of the server");
  },
);

describe.each([
  ["https://tests.example.org", "https://tests.example.org"],
  ["https://example.org/fresh", "https://example.org"],
])("the manifest for %s", (address, domain) => {
  const manifest = manifestFor(readFileSync("manifest.xml", "utf8"), address);

  test("names every file there", () => {
    const files = [...manifest.matchAll(/DefaultValue="(https:[^"]*)"/g)].map((match) => match[1]);
    expect(files).toHaveLength(10);
    for (const file of files) expect(file).toMatch(/\/(?:assets\/)?[\w-]+\.(?:png|html|js|json)$/);
    for (const file of files) expect(file!.startsWith(`${address}/`)).toBe(true);
    expect(manifest).not.toContain("localhost");
  });

  test("allows its domain, which has no folder", () => {
    expect(manifest).toContain(`<AppDomain>${domain}</AppDomain>`);
  });
});

test("a sign that XML keeps for itself is written as XML wants it", () => {
  expect(manifestFor('<a b="https://localhost:3000/x.png"/>', "https://example.org/a&b")).toBe(
    '<a b="https://example.org/a&amp;b/x.png"/>',
  );
});

test.each([
  ["https://example.org/fresh/index.html", "https://example.org/fresh"],
  ["https://example.org/fresh/", "https://example.org/fresh"],
  ["https://example.org/?a=1", "https://example.org"],
  ["https://example.org:8443/a/b/index.html#way", "https://example.org:8443/a/b"],
])("the page %s belongs to the add-in at %s", (page, address) => {
  expect(addressOfPage(page)).toBe(address);
});
