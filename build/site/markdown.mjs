import { Marked } from "marked";

/** The anchor of a heading, the same that the usual viewers of Markdown give it. */
export function anchorOf(heading) {
  return heading
    .toLowerCase()
    .replace(/<[^>]*>|&\w+;/g, "")
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .trim()
    .replaceAll(" ", "-");
}

/**
 * A page of Markdown as HTML: headings get anchors, wide tables scroll, and links to other pages lead
 * to their HTML.
 *
 * @param {string} text
 * @returns {string}
 */
export function htmlOf(text) {
  const marked = new Marked({
    renderer: {
      heading({ tokens, depth, text: raw }) {
        const words = this.parser.parseInline(tokens);
        return `<h${depth} id="${anchorOf(raw.replaceAll("`", ""))}">${words}</h${depth}>\n`;
      },
      link({ href, tokens }) {
        const words = this.parser.parseInline(tokens);
        return `<a href="${escaped(linkFor(href))}">${words}</a>`;
      },
    },
  });
  const html = marked.parse(text.replace(/<!--[^]*?-->/g, ""));
  return html
    .replaceAll("<table>", '<div class="wide" tabindex="0"><table>')
    .replaceAll("</table>", "</table></div>");
}

/** Links that leave the pages lead to where the same thing is in a build. */
function linkFor(href) {
  if (/^\w+:|^#/.test(href)) return href;
  return href
    .replace(/^\.\.\/README\.md/, "index.html")
    .replace(/^\.\.\/(?=samples\/)/, "../")
    .replace(/\.md(?=#|$)/, ".html");
}

/** @param {string} text */
export function escaped(text) {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
