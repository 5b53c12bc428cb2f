/** Puts a text on the clipboard; false where the page may not. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyFromPage(text);
  }
}

/** A pane inside another program is often refused the clipboard, but not what is selected on it. */
function copyFromPage(text: string): boolean {
  const area = document.createElement("textarea");
  area.value = text;
  area.className = "for-ears";
  const before = document.activeElement;
  document.body.append(area);
  area.select();
  const copied = document.execCommand("copy");
  area.remove();
  if (before instanceof HTMLElement) before.focus();
  return copied;
}
