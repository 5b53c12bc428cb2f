import { createServer } from "node:net";
import { platform } from "node:os";
import { FOR_OTHER_SITES } from "./served-headers.mjs";

const FIRST_PORT = 3000;
const LAST_PORT = 3099;

/**
 * Settings of the local server. Pages are served once and left alone: no socket back to the server,
 * nothing reloads, nothing is asked for after a page has loaded.
 *
 * @param {boolean} https Whether to serve over https, as Excel wants it, on the manifest's own port.
 */
export async function devServer(https) {
  const port = https ? FIRST_PORT : await freePort();
  const scheme = https ? "https" : "http";
  return {
    host: "localhost",
    port,
    server: https ? { type: "https", options: await certificates() } : "http",
    hot: false,
    liveReload: false,
    client: false,
    webSocketServer: false,
    static: false,
    headers: { ...FOR_OTHER_SITES },
    // Without a list the server answers 403 to the pictures that Excel's own pages ask for.
    allowedHosts: ["localhost"],
    devMiddleware: { index: "workbench.html" },
    open: hasDesktop() && !https ? [`${scheme}://localhost:${port}/workbench.html`] : false,
  };
}

/** Tells once where the workbench is, when everything is built. */
export class ReadyLine {
  apply(compiler) {
    let told = false;
    compiler.hooks.done.tap("ReadyLine", (stats) => {
      const server = compiler.options.devServer;
      if (told || stats.hasErrors() || !server) return;
      told = true;
      const scheme = server.server === "http" ? "http" : "https";
      const address = `${scheme}://localhost:${server.port}`;
      setImmediate(() => {
        console.log(`The workbench is ready: ${address}/workbench.html`);
        if (scheme === "https")
          console.log(`Excel can load the add-in; manifest and steps: ${address}/index.html`);
        console.log("Stop it with Ctrl+C.");
      });
    });
  }
}

/** Both addresses of this machine are tried, since a browser may take either for localhost. */
async function freePort() {
  for (let port = FIRST_PORT; port <= LAST_PORT; port++)
    if ((await isFree(port, "127.0.0.1")) && (await isFree(port, "::1"))) return port;
  throw new Error(`No free port from ${FIRST_PORT} to ${LAST_PORT}. Stop a server and try again.`);
}

function isFree(port, host) {
  return new Promise((resolve) => {
    const server = createServer();
    // A machine without IPv6 has nothing in the way there.
    server.once("error", (error) => resolve(error.code !== "EADDRINUSE"));
    server.listen({ port, host }, () => server.close(() => resolve(true)));
  });
}

function hasDesktop() {
  if (process.env.CI) return false;
  if (platform() === "darwin" || platform() === "win32") return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/** Certificates that Excel on this machine trusts; the first time it asks whether to install them. */
async function certificates() {
  const { getHttpsServerOptions } = await import("office-addin-dev-certs");
  return getHttpsServerOptions();
}
