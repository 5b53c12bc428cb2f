import { say } from "../../messages/pane-catalogue";

/** Signs that stand for the numbers of the page and of all. */
const [PAGE, PAGES] = ["\ue000", "\ue001"] as const;
/** Room at the edges of the paper. */
const MARGINS = "14mm 12mm 16mm";

/**
 * What stands at the foot of every page that is printed: file and sheet, and the number of the page. Where
 * a browser knows no boxes at the edge of a page it leaves them out.
 *
 * @returns Takes it away again.
 */
export function putPageFoot(file: string, sheet: string): () => void {
  const foot = new CSSStyleSheet();
  const look = "font: 8pt system-ui, 'Segoe UI', sans-serif; color: #333;";
  // The numbers of the pages are put in by the browser.
  const page = say("report-page", { page: PAGE, pages: PAGES })
    .split(/([\ue000\ue001])/)
    .map((part) =>
      part === PAGE ? "counter(page)" : part === PAGES ? "counter(pages)" : text(part),
    )
    .join(" ");
  foot.replaceSync(
    `@page { margin: ${MARGINS};` +
      ` @bottom-left { content: ${text(say("report-foot", { file, sheet }))}; ${look} }` +
      ` @bottom-right { content: ${page}; ${look} } }`,
  );
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, foot];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== foot);
  };
}

/** Any text as one of a style sheet, in which it can end nothing. */
function text(words: string): string {
  const codes = [...words].map((sign) =>
    /[\w ]/.test(sign) ? sign : `\\${sign.codePointAt(0)!.toString(16)} `,
  );
  return `"${codes.join("")}"`;
}
