import type { Bias } from "../../acceptance/bias/bias";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import type { BiasChart } from "./bias-chart";
import { biasSentence } from "./bias-words";
import { svg } from "./svg";

/** Says what is known of the one that the mouse or the arrow keys point at. */
export function biasReader(): {
  readonly line: HTMLElement;
  read(chart: BiasChart, lines: readonly Bias[], decimal: DecimalMark): void;
} {
  const line = element("div", {
    class: "chart-reading",
    role: "slider",
    tabindex: 0,
    "aria-label": say("bias-read-off"),
    "aria-valuemin": 1,
  });
  const pin = svg("path", {
    "stroke-width": 1,
    "pointer-events": "none",
    "stroke-dasharray": "2 3",
  });
  let now: { chart: BiasChart; lines: readonly Bias[]; decimal: DecimalMark } | undefined;
  let at = -1;

  function show(wanted: number): void {
    if (!now) return;
    const { chart, lines, decimal } = now;
    at = Math.max(0, Math.min(lines.length - 1, wanted));
    const sentence = biasSentence(lines[at]!, decimal);
    const y = chart.middle(at) + 11;
    pin.setAttribute("d", `M2 ${y}H${Number(chart.picture.getAttribute("width")) - 2}`);
    line.textContent = sentence;
    line.setAttribute("aria-valuenow", String(at + 1));
    line.setAttribute("aria-valuetext", sentence);
  }

  line.addEventListener("keydown", (event) => {
    if (!now) return;
    const goal = {
      ArrowDown: at + 1,
      ArrowRight: at + 1,
      ArrowUp: at - 1,
      ArrowLeft: at - 1,
      Home: 0,
      End: now.lines.length - 1,
    }[event.key];
    if (goal === undefined) return;
    show(goal);
    event.preventDefault();
  });

  return {
    line,
    read(chart, lines, decimal) {
      now = { chart, lines, decimal };
      at = -1;
      pin.removeAttribute("d");
      pin.setAttribute("stroke", chart.picture.getAttribute("fill")!);
      chart.picture.append(pin);
      const hint = say("bias-read-off-hint");
      line.textContent = hint;
      line.setAttribute("aria-valuemax", String(lines.length));
      line.setAttribute("aria-valuenow", "1");
      line.setAttribute("aria-valuetext", hint);
      chart.picture.addEventListener("pointermove", ({ clientY }) =>
        show(chart.nearest(clientY - chart.picture.getBoundingClientRect().top)),
      );
    },
  };
}
