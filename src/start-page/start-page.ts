import { startPageMessages as english } from "../messages/english/start-page";
import { startPageMessages as spanish } from "../messages/spanish/start-page";
import { askHost } from "./ask-host";
import { needsOf, type HostNeed } from "./host-check";
import { addressOfPage, manifestFor } from "./manifest-for";
import "./site.css";

/** Each language has a page of its own. */
const startPageMessages = document.documentElement.lang === "es" ? spanish : english;
const part = (id: string) => document.getElementById(id)!;
const address = addressOfPage(location.href);
const https = address.startsWith("https://");

/** The manifest is made here, for the address at which this page was opened. */
function offerManifest(): void {
  const link = part("manifest") as HTMLAnchorElement;
  part("address").textContent = address;
  if (!https) {
    part("manifest-says").textContent = startPageMessages["manifest-needs-https"];
    link.remove();
    return;
  }
  const manifest = new Blob([manifestFor(part("manifest-text").textContent.trim(), address)], {
    type: "application/xml",
  });
  link.href = URL.createObjectURL(manifest);
}

function needItem({ id, met }: HostNeed): HTMLLIElement {
  const item = document.createElement("li");
  const word = document.createElement("b");
  word.textContent = startPageMessages[met ? "is-there" : "is-missing"];
  const { what, mend } = startPageMessages[id];
  item.append(word, " ", met ? what : `${what} ${mend}`);
  item.classList.toggle("missing", !met);
  return item;
}

async function checkHost(): Promise<void> {
  const says = part("check-says");
  try {
    const needs = needsOf(await askHost(address));
    const missing = needs.filter(({ met }) => !met).length;
    says.textContent =
      missing === 0
        ? startPageMessages["host-is-ready"]
        : startPageMessages["host-lacks"]({ missing: String(missing) });
    part("check").replaceChildren(...needs.map(needItem));
  } catch {
    says.textContent = startPageMessages["host-not-asked"];
  }
}

offerManifest();
void checkHost();
