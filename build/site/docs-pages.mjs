import { readFileSync } from "node:fs";
import { escaped, htmlOf } from "./markdown.mjs";

/** The pages of the site in reading order: the name in docs/, and what the list of pages calls it. */
export const PAGES = [
  ["index", "What it is for"],
  ["ten-minutes", "Ten minutes"],
  ["setup", "Setup"],
  ["install", "Install"],
  ["functions", "Functions"],
  ["rules", "Rules"],
  ["clauses", "Clauses"],
  ["diagnosis", "Slips"],
  ["review", "Review"],
  ["numbers", "Numbers and trust"],
  ["excel-versions", "Versions of Excel"],
  ["privacy", "Privacy"],
  ["cautions", "Cautions"],
  ["command-line", "Command line"],
  ["gallery", "Pictures"],
  ["host-figures", "What Excel is asked"],
  ["page-figures", "How long the page is held"],
  ["benchmark", "Speed"],
  ["first-half-hour", "First half hour"],
];

/**
 * The documents as a static site, by the names of its files.
 *
 * @param {string} docs Folder of the pages in Markdown.
 * @param {string} version Version and day of the build.
 * @returns {Record<string, string>}
 */
export function docsPages(docs, version) {
  const read = (name) => readFileSync(`${docs}/${name}.md`, "utf8").replaceAll("\r\n", "\n");
  return Object.fromEntries(
    PAGES.map(([name]) => [`docs/${name}.html`, documentPage(name, read(name), version)]),
  );
}

function documentPage(name, markdown, version) {
  const title = /^# (.*)$/m.exec(markdown)[1].replaceAll("`", "");
  const links = PAGES.map(([page, label]) => {
    const here = page === name ? ' aria-current="page"' : "";
    return `<li><a href="${page}.html"${here}>${escaped(label)}</a></li>`;
  });
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta name="color-scheme" content="light dark" />
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'" />
    <title>${escaped(title)} · Fresh Concrete Functions</title>
    <link rel="icon" href="../assets/icon-32.png" />
    <link rel="stylesheet" href="site.css" />
  </head>
  <body>
    <a class="skip" href="#text">To the text</a>
    <header>
      <a class="home" href="../index.html">Fresh Concrete Functions</a>
      <nav aria-label="Pages"><ul>${links.join("")}</ul></nav>
    </header>
    <main id="text">
${htmlOf(markdown)}
    </main>
    <footer>Version ${escaped(version)}. <a href="../licences.txt">Licences</a>. <a href="cautions.html">Cautions</a>: fresh concrete is caustic, isopropyl alcohol is flammable, a filled meter is heavy. Project specification, local codes and the licensed engineer come first.</footer>
  </body>
</html>
`;
}
