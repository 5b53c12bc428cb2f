import { element } from "./element";

/** A labelled input for words. */
export interface TextInput {
  readonly view: HTMLElement;
  show(typed: string): void;
}

/** @param onInput Told what stands in the input after each key. */
export function textInput(label: string, onInput: (typed: string) => void): TextInput {
  const input = element("input", { type: "text", autocomplete: "off", maxlength: 200 });
  input.addEventListener("input", () => onInput(input.value));
  return {
    view: element("label", { class: "input wide" }, element("span", {}, label), input),
    show(typed) {
      if (input.value !== typed) input.value = typed;
    },
  };
}
