import { readFileSync } from "node:fs";
import { escaped, htmlOf } from "./markdown.mjs";

/** The pages of the site in reading order: the name in docs/, and what the list of pages calls it. */
export const PAGES = [
  ["index", "What it is for"],
  ["ten-minutes", "Ten minutes"],
  ["sheets", "Sheets"],
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

/** The same in Spanish, as far as there are such pages, each with the page that says it in English. */
export const PAGES_IN_SPANISH = [
  ["inicio", "Para qué sirve", "index"],
  ["diez-minutos", "Diez minutos", "ten-minutes"],
  ["instalar", "Instalar", "install"],
  ["funciones", "Funciones", "functions"],
  ["reglas", "Reglas", "rules"],
  ["privacidad", "Privacidad", "privacy"],
  ["precauciones", "Precauciones", "cautions"],
];

/** What stands around the text of a page. */
const AROUND = {
  en: {
    pages: PAGES,
    start: "index.html",
    skip: "To the text",
    list: "Pages",
    foot: (version) =>
      `Version ${version}. <a href="../licences.txt">Licences</a>. <a href="cautions.html">Cautions</a>: fresh concrete is caustic, isopropyl alcohol is flammable, a filled meter is heavy. Project specification, local codes and the licensed engineer come first.`,
  },
  es: {
    pages: PAGES_IN_SPANISH,
    start: "instalar.html",
    skip: "Al texto",
    list: "Páginas",
    foot: (version) =>
      `Versión ${version}. <a href="../licences.txt">Licencias</a>. <a href="precauciones.html">Precauciones</a>: el concreto fresco es cáustico, el alcohol isopropílico es inflamable, un medidor lleno es pesado. La especificación del proyecto, los reglamentos locales y el ingeniero con licencia van primero.`,
  },
};

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
    Object.entries(AROUND).flatMap(([language, { pages }]) =>
      pages.map(([name]) => [
        `docs/${name}.html`,
        documentPage(name, read(name), version, language),
      ]),
    ),
  );
}

/** The link to the page that says the same in the other language, or else to the first one there. */
function otherLanguage(name, language) {
  const [other, label, to] =
    language === "es"
      ? ["en", "English", PAGES_IN_SPANISH.find(([page]) => page === name)[2]]
      : ["es", "Español", (PAGES_IN_SPANISH.find(([, , page]) => page === name) ?? ["inicio"])[0]];
  return `<li><a href="${to}.html" hreflang="${other}" lang="${other}">${label}</a></li>`;
}

function documentPage(name, markdown, version, language) {
  const { pages, skip, list, foot, start } = AROUND[language];
  const title = /^# (.*)$/m.exec(markdown)[1].replaceAll("`", "");
  const links = pages.map(([page, label]) => {
    const here = page === name ? ' aria-current="page"' : "";
    return `<li><a href="${page}.html"${here}>${escaped(label)}</a></li>`;
  });
  return `<!doctype html>
<html lang="${language}">
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
    <a class="skip" href="#text">${skip}</a>
    <header>
      <a class="home" href="../${start}">Fresh Concrete Functions</a>
      <nav aria-label="${list}"><ul>${links.join("")}${otherLanguage(name, language)}</ul></nav>
    </header>
    <main id="text">
${htmlOf(markdown)}
    </main>
    <footer>${foot(escaped(version))}</footer>
  </body>
</html>
`;
}
