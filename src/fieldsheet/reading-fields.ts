/** The fields that hold a meter reading, in the order in which they are taken. */
export const READING_FIELDS = ["first", "second", "third", "final"] as const;
