import { element } from "./element";

/** A labelled choice of one among several. */
export interface Choice<T extends string> {
  readonly view: HTMLElement;
  value(): T;
  /** Offers these; what was chosen stays chosen where it is still offered. */
  offer(options: readonly (readonly [value: T, label: string])[]): void;
}

export function choice<T extends string>(label: string, onChange: () => void): Choice<T> {
  const select = element("select");
  select.addEventListener("change", onChange);
  return {
    view: element("label", { class: "input wide" }, element("span", {}, label), select),
    value: () => select.value as T,
    offer(options) {
      const before = select.value;
      select.replaceChildren(
        ...options.map(([value, text]) =>
          element("option", { value, selected: value === before }, text),
        ),
      );
    },
  };
}
