import { mkdtempSync, writeFileSync } from "node:fs";
import { get, type IncomingMessage } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import webpack from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { devServer } from "../../build/dev-server.mjs";

// Source of what Excel's pages ask and need: the Fetch standard (fetch.spec.whatwg.org), "CORS check"
// and "Cross-Origin-Resource-Policy check", and Fetch Metadata (w3.org/TR/fetch-metadata).

let server: WebpackDevServer;
let port: number;

beforeAll(async () => {
  process.env.CI ??= "1"; // no browser is opened
  const folder = mkdtempSync(join(tmpdir(), "dev-server-"));
  writeFileSync(join(folder, "functions.json"), "{}");
  writeFileSync(join(folder, "icon-32.png"), "");
  writeFileSync(join(folder, "entry.js"), "");
  const compiler = webpack({
    mode: "none",
    context: folder,
    entry: "./entry.js",
    stats: "none",
    infrastructureLogging: { level: "none" },
  })!;
  const settings = await devServer(false);
  port = settings.port;
  server = new WebpackDevServer({ ...settings, static: folder }, compiler);
  await server.start();
});

afterAll(() => server.stop());

function asked(path: string, headers: Record<string, string>): Promise<IncomingMessage> {
  return new Promise((resolve, reject) => {
    get({ host: "localhost", port, path, headers }, (response) => {
      response.resume();
      resolve(response);
    }).on("error", reject);
  });
}

const FROM_EXCEL = { origin: "https://excel.officeapps.example", "sec-fetch-site": "cross-site" };

test("a page of another site may read functions.json", async () => {
  const { statusCode, headers } = await asked("/functions.json", {
    ...FROM_EXCEL,
    "sec-fetch-mode": "cors",
    "sec-fetch-dest": "empty",
  });
  expect(statusCode).toBe(200);
  expect(headers["access-control-allow-origin"]).toBe("*");
});

test("a page of another site may show an icon", async () => {
  const { statusCode, headers } = await asked("/icon-32.png", {
    "sec-fetch-site": "cross-site",
    "sec-fetch-mode": "no-cors",
    "sec-fetch-dest": "image",
  });
  expect(statusCode).toBe(200);
  expect(headers["cross-origin-resource-policy"] ?? "cross-origin").toBe("cross-origin");
});

test("another name for this machine is refused, so no other site can pass for it", async () => {
  const { statusCode } = await asked("/functions.json", { host: "elsewhere.example" });
  expect(statusCode).toBe(403);
});
