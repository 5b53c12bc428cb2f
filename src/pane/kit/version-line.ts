import { say } from "../../messages/pane-catalogue";
import { element } from "./element";

/** Version and day of the build, which the page carries; nothing where it does not. */
export function versionLine(): HTMLElement | "" {
  const version = document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content;
  return version ? element("p", { class: "quiet version" }, say("pane-version", { version })) : "";
}
