import type { listMessages as english } from "../english/lists";
import type { SameSentences } from "../sentence";

/** How the last of several things is joined to those before it. */
export const listMessages: SameSentences<typeof english> = {
  "list-all": ({ first, last }) => `${first}, ${last}`,
  "list-either": ({ first, last }) => `${first} ${/^h?[oó]/i.test(last) ? "u" : "o"} ${last}`,
};
