import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const DIST = join(process.cwd(), "dist");
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
};

/** Serves the build on a free port. The build must be there: `npm run build`. */
export async function serveDist(): Promise<{ origin: string; close(): Promise<void> }> {
  if (!existsSync(join(DIST, "workbench.html")))
    throw new Error("The browser tests look at the build. Run npm run build first.");
  const server = createServer(async (request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url!, "http://localhost").pathname));
    try {
      const body = await readFile(join(DIST, path));
      const type = TYPES[extname(path)] ?? "application/octet-stream";
      response.writeHead(200, { "content-type": type }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}`, close: () => closed(server) };
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
