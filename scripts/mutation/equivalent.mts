/** A change that alters nothing which can be seen: the place by its line's text, and the reason. */
export interface Equivalent {
  readonly file: string;
  readonly line: string;
  readonly to: string;
  readonly why: string;
}

export const EQUIVALENT: readonly Equivalent[] = [];
