import { existsSync, readFileSync } from "node:fs";
import { validateXML } from "xmllint-wasm";

// Sources of the expected values, unless a test names another: the public description of the add-in
// manifest by the vendor of the host ("XML manifest", "Configure your add-in to use a shared
// runtime"), from memory. The manifest was once also validated against the published schemas.

const manifest = readFileSync("manifest.xml", "utf8");

/** What stands in the first group of every match. */
function all(pattern: RegExp, text = manifest): string[] {
  return [...text.matchAll(pattern)].map((match) => match[1]!);
}

/** The text between the tags of the first element of this name. */
function inside(element: string, text = manifest): string {
  return new RegExp(`<${element}[ >][\\s\\S]*?</${element}>`).exec(text)?.[0] ?? "";
}

const defined = all(/<bt:(?:Image|Url|String)\s+id="([^"]+)"/g);
const used = all(/resid="([^"]+)"/g);
const valueOf = (id: string) =>
  new RegExp(`id="${id}"\\s+DefaultValue="([^"]*)"`).exec(manifest)?.[1] ?? "";
const urls = [...new Set(all(/Value="(\w+:[^"]*)"/g))];

test("is well-formed", async () => {
  const { errors } = await validateXML({ xml: manifest, normalization: "format" });
  expect(errors).toEqual([]);
});

test("says who it is, by an id of its own", () => {
  expect(all(/<Id>(.*)<\/Id>/g)).toEqual([
    expect.stringMatching(/^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/),
  ]);
  expect(all(/<ProviderName>(.*)<\/ProviderName>/g)).toEqual(["Fresh Concrete Functions"]);
});

test("has the version of the package", () => {
  const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
  expect(all(/<Version>(.*)<\/Version>/g)).toEqual([`${version}.0`]);
  // Excel takes no add-in whose version is below 1.0 (the vendor's page on the element, from memory).
  expect(Number.parseInt(version, 10)).toBeGreaterThanOrEqual(1);
});

describe("resources", () => {
  test("every one that is used is defined, and the other way round", () => {
    expect(defined.length).toBeGreaterThan(0);
    expect([...new Set(used)].sort()).toEqual([...defined].sort());
  });

  test("ids are unique and at most 32 characters", () => {
    expect(new Set(defined).size).toBe(defined.length);
    expect(defined.filter((id) => id.length > 32)).toEqual([]);
  });

  test("short strings are at most 125 characters, long strings at most 250", () => {
    const lengths = (element: string) =>
      all(/Value="([^"]*)"/g, inside(element)).map((text) => text.length);
    expect(Math.max(...lengths("bt:ShortStrings"))).toBeLessThanOrEqual(125);
    expect(Math.max(...lengths("bt:LongStrings"))).toBeLessThanOrEqual(250);
  });

  test("the functions stand under FRESH", () => {
    expect(valueOf("Functions.Namespace")).toBe("FRESH");
  });
});

describe("shared runtime", () => {
  test("functions, commands and task pane name the same page", () => {
    const residOf = (text: string) => all(/resid="([^"]+)"/g, text)[0];
    const runtime = residOf(inside("Runtimes"));
    expect(runtime).toBeDefined();
    expect(residOf(inside("Page"))).toBe(runtime);
    expect(residOf(inside("Action"))).toBe(runtime);
    expect(all(/<FunctionFile resid="([^"]+)"/g)).toEqual([runtime]);
    expect(all(/<SourceLocation DefaultValue="([^"]+)"/g)).toEqual([valueOf(runtime!)]);
  });

  test("lives on when the pane is closed, and no pane has an id of its own", () => {
    expect(all(/<Runtime [^>]*lifetime="(\w+)"/g)).toEqual(["long"]);
    expect(manifest).not.toContain("TaskpaneId");
  });

  test("asks for a host that has it", () => {
    expect(all(/<Set Name="(\w+)"/g)).toEqual(["SharedRuntime", "CustomFunctionsRuntime"]);
  });
});

describe("addresses", () => {
  test("are https, all at one origin, which is the add-in's own", () => {
    const origins = new Set(urls.map((url) => new URL(url).origin));
    expect([...origins]).toEqual(["https://localhost:3000"]);
    expect(all(/<AppDomain>(.*)<\/AppDomain>/g)).toEqual([...origins]);
  });

  test.each(urls)("%s is a file that the build writes (npm run build)", (url) => {
    expect(existsSync(`dist${new URL(url).pathname}`)).toBe(true);
  });
});

describe("icons", () => {
  const icons = urls.filter((url) => url.endsWith(".png"));

  test("are there in the sizes of the ribbon and of the list of add-ins", () => {
    expect(
      all(/icon-(\d+)\.png/g, icons.join())
        .map(Number)
        .sort(),
    ).toEqual([16, 32, 64, 80]);
    for (const size of [16, 32, 80]) {
      expect(valueOf(`Icon.${size}`)).toContain(`icon-${size}.png`);
      expect(manifest).toContain(`<bt:Image size="${size}" resid="Icon.${size}"/>`);
    }
  });

  test.each(icons)("%s has the size that its name says", (url) => {
    const picture = readFileSync(`src${new URL(url).pathname}`);
    // PNG specification (W3C), 11.2.2: width and height are the first fields of the first chunk.
    const size = [picture.readUInt32BE(16), picture.readUInt32BE(20)];
    const named = Number(/icon-(\d+)/.exec(url)![1]);
    expect(size).toEqual([named, named]);
  });
});
