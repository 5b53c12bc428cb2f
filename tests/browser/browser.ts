import { chromium, type Browser } from "playwright-core";

const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts the browser that was found before the tests. */
export function launchBrowser(): Promise<Browser> {
  const executablePath = process.env.TEST_BROWSER;
  if (!executablePath)
    throw new Error(
      "No browser for the browser tests. Install Chrome, Chromium or Edge, or set CHROME_PATH to one.",
    );
  return chromium.launch({
    executablePath,
    args: ARGUMENTS,
    // In a bare Linux the browser would speak "en-US@posix", which is no language of the web.
    env: { ...(process.env as Record<string, string>), LC_ALL: "en_US.UTF-8" },
  });
}
