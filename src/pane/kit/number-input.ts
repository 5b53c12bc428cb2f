import { element } from "./element";

/** A labelled input for a number. It holds a text, so that "5 1/4" and "5,25" can be typed. */
export interface NumberInput {
  readonly view: HTMLElement;
  show(typed: string): void;
}

/**
 * @param label What the number is, with its unit.
 * @param onInput Told what stands in the input after each key.
 */
export function numberInput(label: string, onInput: (typed: string) => void): NumberInput {
  const input = element("input", { type: "text", inputmode: "decimal", autocomplete: "off" });
  input.addEventListener("input", () => onInput(input.value));
  return {
    view: element("label", { class: "input" }, element("span", {}, label), input),
    show(typed) {
      // The cursor would jump while somebody types.
      if (input.value !== typed) input.value = typed;
    },
  };
}
