/**
 * What the spreadsheet component leaves out for people who cannot see it: names of buttons and inputs, and roles.
 * Each line names what lacks something and gives it that (seen in @univerjs 0.25.1).
 */
const MENDS: readonly (readonly [lacking: string, attributes: Readonly<Record<string, string>>])[] =
  [
    ["[data-u-command='univer.command.undo']", { "aria-label": "Undo" }],
    ["[data-u-command='univer.command.redo']", { "aria-label": "Redo" }],
    [
      "[data-u-command='sheet.command.set-once-format-painter']",
      { "aria-label": "Copy the format" },
    ],
    [
      "[data-u-command='sheet.command.clear-selection-format']",
      { "aria-label": "Clear the format" },
    ],
    ["[data-u-command$='font-increase']", { "aria-label": "Larger letters" }],
    ["[data-u-command$='font-decrease']", { "aria-label": "Smaller letters" }],
    ["[data-u-command='sheet.command.set-range-bold']", { "aria-label": "Bold" }],
    ["[data-u-command='sheet.command.set-range-italic']", { "aria-label": "Italic" }],
    ["[data-u-command='sheet.command.set-range-underline']", { "aria-label": "Underlined" }],
    ["[data-u-command='sheet.command.set-range-stroke']", { "aria-label": "Struck through" }],
    ["[data-u-command='sheet.command.toggle-gridlines']", { "aria-label": "Grid lines" }],
    ["[data-u-comp='sheet-bar-append-button']", { "aria-label": "Add or list sheets" }],
    ["[role='track']", { role: "presentation" }],
    ["[aria-haspopup]:not(button, [role], :has(input, button))", { role: "button" }],
    ["canvas[tabindex='1']", { tabindex: "-1" }],
    ["button[role='handle']", { role: "slider", "aria-label": "Zoom", "aria-valuenow": "100" }],
    ["input:not([aria-label]):not([id])", { "aria-label": "Value" }],
  ];

/** Names of whatever else is a button of the spreadsheet without a word. */
const NAMELESS = ":is(button, [role=button]):not([aria-label])";
/** What opens something and holds an input or a button, which does so as well. */
const OPENS_TWICE = "[aria-haspopup]:not(button):has(input, button)";
/** Two places for messages of one name, both empty here. */
const MESSAGES = "section[aria-label^=Notifications]";

/** Mends the spreadsheet's page from outside, now and whenever it changes. */
export function mendGrid(grid: HTMLElement): void {
  let asked = false;
  const mend = () => {
    asked = false;
    for (const [lacking, attributes] of MENDS)
      for (const part of grid.querySelectorAll(lacking))
        for (const [name, value] of Object.entries(attributes)) part.setAttribute(name, value);
    for (const button of grid.querySelectorAll<HTMLElement>(NAMELESS))
      if (!button.textContent?.trim()) button.setAttribute("aria-label", nameOf(button));
    for (const part of grid.querySelectorAll(OPENS_TWICE)) {
      part.removeAttribute("aria-haspopup");
      part.removeAttribute("aria-expanded");
    }
    for (const part of document.querySelectorAll(MESSAGES)) part.setAttribute("role", "group");
  };
  new MutationObserver(() => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(mend);
  }).observe(grid, { childList: true, subtree: true });
  mend();
}

/** The words of a button's command, "set range text color", which are better than none. */
function nameOf(button: HTMLElement): string {
  const command = button.dataset.uCommand?.split(".").at(-1) ?? "";
  return command.replaceAll("-", " ") || "More";
}
