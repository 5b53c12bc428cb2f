/*
 * Runs once before the tests and tells them, in the environment, which browser they may use: the one
 * named in CHROME_PATH, an installed one of the Chromium family, or on Linux the one that npm brought.
 */
const { existsSync } = require("node:fs");
const { join } = require("node:path");

module.exports = async () => {
  const installed = [process.env.CHROME_PATH, ...usualPlaces()].find(
    (path) => path && existsSync(path),
  );
  if (installed) {
    process.env.TEST_BROWSER = installed;
    return;
  }
  if (process.platform !== "linux" || process.arch !== "x64") return;
  // With this set the package also unpacks the libraries that a bare Linux lacks.
  process.env.AWS_EXECUTION_ENV ??= "AWS_Lambda_nodejs22.x";
  const { default: chromium } = await import("@sparticuz/chromium");
  process.env.TEST_BROWSER = await chromium.executablePath();
};

function usualPlaces() {
  switch (process.platform) {
    case "darwin":
      return ["Google Chrome", "Chromium", "Microsoft Edge"].map(
        (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
      );
    case "win32":
      return ["ProgramFiles", "ProgramFiles(x86)", "LocalAppData"]
        .map((folder) => process.env[folder])
        .filter(Boolean)
        .flatMap((folder) => [
          join(folder, "Google", "Chrome", "Application", "chrome.exe"),
          join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
        ]);
    default:
      return [
        "google-chrome",
        "google-chrome-stable",
        "chromium",
        "chromium-browser",
        "microsoft-edge",
      ].map((name) => `/usr/bin/${name}`);
  }
}
