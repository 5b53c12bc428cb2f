import { readFileSync } from "node:fs";

const CLIENT_LIBRARY = "https://appsforoffice.microsoft.com";

function policyOf(page: string): Map<string, string[]> {
  const html = readFileSync(page, "utf8");
  const policy = /Content-Security-Policy"\s+content="([^"]+)"/.exec(html)![1]!;
  return new Map(
    policy.split(";").map((directive) => {
      const [name, ...sources] = directive.trim().split(" ");
      return [name!, sources];
    }),
  );
}

describe("the pane in Excel", () => {
  const policy = policyOf("src/pane/taskpane.html");

  // Source: the client library's own text (excel-web-16.00.debug.js, "AgaveErrorUX/index.html"): where
  // it does not know the site that shows Excel, it asks in a frame from the host that it came from.
  test("lets the client library load its scripts and open its frame", () => {
    expect(policy.get("script-src")).toEqual(["'self'", CLIENT_LIBRARY]);
    expect(policy.get("frame-src")).toEqual([CLIENT_LIBRARY]);
  });

  test("connects to its own host only, and everything not named is refused", () => {
    expect(policy.get("connect-src")).toEqual(["'self'"]);
    expect(policy.get("default-src")).toEqual(["'none'"]);
  });
});

test("the workbench loads nothing from anywhere else", () => {
  const sources = [...policyOf("src/workbench/workbench.html").values()].flat();
  expect(sources.filter((source) => /:\/\/|\*/.test(source))).toEqual([]);
});

test("the front page says what the client library may load", () => {
  expect(readFileSync("README.md", "utf8")).toContain(new URL(CLIENT_LIBRARY).host);
});
