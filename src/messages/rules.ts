/** The sentence of each rule, under the rule's own id. `{where}` is the column's header. */
export const ruleMessages = {
  "foam-over-limit":
    "{where}: {foam} divisions of foam are more than the {limit} allowed. The test is void: repeat it with more alcohol.",
} as const;
