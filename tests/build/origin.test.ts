import { manifestFor, originFrom } from "../../build/origin.mjs";

test.each([
  [undefined, "https://localhost:3000"],
  ["https://tests.example.org", "https://tests.example.org"],
  ["https://tests.example.org/", "https://tests.example.org"],
  ["https://tests.example.org:8443", "https://tests.example.org:8443"],
])("an origin given as %s is %s", (given, origin) => {
  expect(originFrom(given)).toBe(origin);
});

test.each(["http://tests.example.org", "https://example.org/add-in", "example.org", "", true])(
  "an origin given as %s is refused",
  (given) => {
    expect(() => originFrom(given)).toThrow("Give the https address without a path");
  },
);

test("every address in the manifest moves to the origin", () => {
  const manifest = '<a b="https://localhost:3000/x.png"/><c d="https://localhost:3000/y.html"/>';
  expect(manifestFor(manifest, "https://tests.example.org")).toBe(
    '<a b="https://tests.example.org/x.png"/><c d="https://tests.example.org/y.html"/>',
  );
});
