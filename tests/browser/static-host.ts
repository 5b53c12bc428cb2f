import { createServer, type Server } from "node:https";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import { generate } from "selfsigned";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
};

/** A static host with https. */
export interface StaticHost {
  readonly origin: string;
  close(): Promise<void>;
}

/**
 * A static host with https, which puts files into a folder of its own and reads, where it is told to,
 * the headers from the file `_headers` among them, as common hosts do.
 *
 * @param files By name, such as "docs/index.html".
 */
export async function staticHost(
  files: ReadonlyMap<string, Uint8Array>,
  folder: string,
  readsHeaders: boolean,
): Promise<StaticHost> {
  const headers = readsHeaders ? headersIn(files.get("_headers")!) : {};
  const { private: key, cert } = await generate([{ name: "commonName", value: "localhost" }]);
  const server = createServer({ key, cert }, (request, response) => {
    const { pathname } = new URL(request.url!, "https://localhost");
    const name = pathname.startsWith(folder) ? pathname.slice(folder.length) : "none";
    const body = files.get(name || "index.html");
    if (!body) return response.writeHead(404).end();
    const type = TYPES[extname(name || "index.html")] ?? "application/octet-stream";
    return response.writeHead(200, { "content-type": type, ...headers }).end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
  const { port } = server.address() as AddressInfo;
  return { origin: `https://localhost:${port}`, close: () => closed(server) };
}

/** The headers for all files in a `_headers` file. */
function headersIn(file: Uint8Array): Record<string, string> {
  const [path, ...lines] = new TextDecoder().decode(file).trim().split("\n");
  if (path !== "/*") throw new Error(`_headers begins with "${path}", not with all files`);
  return Object.fromEntries(lines.map((line) => line.trim().split(": ") as [string, string]));
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
