import type { Words } from "../sentence";

/** How the last of several things is joined to those before it. */
export const listMessages = {
  "list-all": ({ first, last }: Words<"first" | "last">) => `${first}, ${last}`,
  "list-either": ({ first, last }: Words<"first" | "last">) => `${first} or ${last}`,
} as const;
