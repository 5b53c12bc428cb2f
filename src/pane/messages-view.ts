import { say } from "../messages/pane-catalogue";
import { button, element } from "./kit/element";
import type { PaneStore } from "./state/pane-state";

/** What is under way, what was done and what went wrong; read out by screen readers. */
export function messagesView(store: PaneStore, stop: () => void): HTMLElement {
  const error = element("p", { role: "alert", class: "problem" });
  const status = element("p", { role: "status", class: "status" });
  const bar = element("progress", { max: 1, "aria-label": say("pane-progress") });
  const label = element("span");
  const stopButton = button(say("pane-stop"), stop);
  const work = element("div", { class: "work", hidden: true }, label, bar, stopButton);
  store.watch(
    (state) => state.error,
    (sentence) => (error.textContent = sentence),
  );
  store.watch(
    (state) => state.status,
    (sentence) => (status.textContent = sentence),
  );
  store.watch(
    (state) => state.work,
    (now) => {
      work.hidden = now === undefined;
      stopButton.hidden = !now?.canStop;
      label.textContent = now?.label ?? "";
      if (now?.share === undefined) bar.removeAttribute("value");
      else bar.value = now.share;
    },
  );
  return element("div", { class: "messages" }, error, status, work);
}
