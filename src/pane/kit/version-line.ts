import { say } from "../../messages/pane-catalogue";
import { element } from "./element";

/** Version and day of the build, which the page carries; nothing where it does not. */
export function versionLine(): HTMLElement | "" {
  const version = builtVersion();
  return version ? element("p", { class: "quiet version" }, say("pane-version", { version })) : "";
}

/** The same as a word; "" where the page does not carry it. */
export function builtVersion(): string {
  return document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? "";
}
