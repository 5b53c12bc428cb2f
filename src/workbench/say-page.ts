import { say, type MessageId } from "../messages/pane-catalogue";

/**
 * Says what stands in workbench.html in the language in use. An element names its sentence in `data-say`,
 * and that of its label in `data-say-label`; the English that is there already is seen while it loads.
 */
export function sayPage(): void {
  for (const part of document.querySelectorAll<HTMLElement>("[data-say]"))
    part.replaceChildren(...withCode(say(part.dataset.say as TextId)));
  for (const part of document.querySelectorAll<HTMLElement>("[data-say-label]"))
    part.setAttribute("aria-label", say(part.dataset.sayLabel as TextId));
}

type TextId = MessageId & `page-${string}`;

/** What stands between backquotes is typed, and shown so. */
function withCode(sentence: string): (string | HTMLElement)[] {
  return sentence.split("`").map((piece, i) => {
    if (i % 2 === 0) return piece;
    const code = document.createElement("code");
    code.textContent = piece;
    return code;
  });
}
