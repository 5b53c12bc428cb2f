import type { Words } from "../sentence";

/** What the page of the worksheet functions says. */
export const paneFunctionsMessages = {
  "pane-page-functions": "Functions",
  "functions-title": "Functions",
  "functions-search": "Name, or a word of the trade, such as unit weight",
  "functions-loading": "The help of the functions is being loaded.",
  "functions-not-loaded":
    "The help of the functions could not be loaded. Close the pane and open it again; the functions themselves work without it.",
  "functions-found": ({ count }: Words<"count">) => `Functions: ${count}.`,
  "functions-none": ({ typed }: Words<"typed">) =>
    `No function is found for “${typed}”. Try one word, such as air, yield or limit.`,
  "functions-optional": ({ name }: Words<"name">) => `${name} (may be left out)`,
  "functions-example": "Example:",
  "functions-insert": "Insert the example",
  "functions-insert-hint":
    "An example goes into the selected cell, where it calculates at once; put your own cells in place of its numbers. A cell that holds something is left as it is.",
  "functions-inserted": ({ cell }: Words<"cell">) => `Inserted into ${cell}.`,
  "cell-is-filled": ({ cell }: Words<"cell">) =>
    `${cell} holds something, so nothing was inserted. Select an empty cell and insert again.`,
} as const;
