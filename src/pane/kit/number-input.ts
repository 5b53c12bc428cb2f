import { element } from "./element";

/** A labelled input for a number. It holds a text, so that "5 1/4" and "5,25" can be typed. */
export interface NumberInput {
  readonly view: HTMLElement;
  show(typed: string): void;
  /** Says at the input what is wrong with it; "" for nothing. */
  complain(sentence: string): void;
}

let made = 0;

/**
 * @param label What the number is, with its unit.
 * @param onInput Told what stands in the input after each key.
 */
export function numberInput(label: string, onInput: (typed: string) => void): NumberInput {
  const input = element("input", { type: "text", inputmode: "decimal", autocomplete: "off" });
  const complaint = element("span", { class: "complaint", id: `fresh-complaint-${(made += 1)}` });
  input.addEventListener("input", () => onInput(input.value));
  return {
    view: element(
      "div",
      { class: "input" },
      element("label", {}, element("span", {}, label), input),
      complaint,
    ),
    show(typed) {
      // The cursor would jump while somebody types.
      if (input.value !== typed) input.value = typed;
    },
    complain(sentence) {
      complaint.textContent = sentence;
      input.setAttribute("aria-invalid", String(sentence !== ""));
      if (sentence) input.setAttribute("aria-describedby", complaint.id);
      else input.removeAttribute("aria-describedby");
    },
  };
}
