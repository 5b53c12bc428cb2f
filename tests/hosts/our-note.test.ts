import fc from "fast-check";
import { noteText, readNote } from "../../src/hosts/our-note";

const OURS = noteText(["Look at it.", "A cell says “a\r\nb”."]);
const LINES = OURS.split("\n");
const SIGN = LINES.at(-1)!;
/** As version 1.0.0 wrote the same. */
const EARLIER = "Checked with FRESH (3 lines, 0t7s65w08cl0i3)\nLook at it.\nA cell says “a\nb”.";

test("a note of ours that nobody has touched is ours, whatever its line ends", () => {
  expect(LINES[0]).toBe("Look at it.");
  expect(SIGN).toMatch(/^Checked with FRESH \(3 lines above, [0-9a-z]+\)$/);
  for (const end of ["\n", "\r\n", "\r"]) {
    expect(readNote(LINES.join(end))).toEqual({ whose: "ours" });
    expect(readNote(EARLIER.replaceAll("\n", end))).toEqual({ whose: "ours" });
  }
});

test.each([
  ["a name above", `Ana:\n${OURS}`, "Ana:"],
  ["a line below", `${OURS}\nAsked by phone.`, "Asked by phone."],
  ["lines above and below", `Ana:\n${OURS}\n\nAsked.\n`, "Ana:\n\nAsked.\n"],
  ["our lines twice", `${OURS}\nAsked.\n${OURS}`, "Asked."],
  ["a second sign without its own", `${OURS}\n${SIGN}`, SIGN],
  ["lines around one of an earlier version", `Ana:\n${EARLIER}\nAsked.`, "Ana:\nAsked."],
  ["both an earlier and a new one", `${EARLIER}\nAsked.\n${OURS}`, "Asked."],
])("with %s, what is not ours is told apart letter for letter", (_, text, rest) => {
  expect(readNote(text)).toEqual({ whose: "shared", rest });
});

test.each([
  ["typed behind our last line", `${OURS} Asked.`],
  ["typed behind the last line of an earlier one", `${EARLIER} Asked.`],
  ["a line of an earlier one taken out", EARLIER.split("\n").slice(0, -1).join("\n")],
  ["typed inside a line", OURS.replace("Look", "Do look")],
  ["a line between ours", [LINES[0], "Asked.", ...LINES.slice(1)].join("\n")],
  ["a sentence replaced", ["Asked.", ...LINES.slice(1)].join("\n")],
  ["one of our lines taken out", LINES.slice(1).join("\n")],
  ["two of our lines changed over", [LINES[0], LINES[2], LINES[1], SIGN].join("\n")],
  ["the count changed", OURS.replace("3 lines", "2 lines")],
  ["the digest changed", OURS.replace(/, ./, ", -")],
  ["our sign alone", SIGN],
])("a note with %s is somebody's own by now", (_, text) => {
  expect(readNote(text)).toEqual({ whose: "changed" });
});

test.each(["Checked with care", "Ask.\nWas checked with FRESH (3)", "Look at it.", ""])(
  "a note of anybody else is theirs: %j",
  (text) => {
    expect(readNote(text)).toEqual({ whose: "theirs" });
  },
);

test("whatever somebody writes above and below is left, and no other change is taken for ours", () => {
  const line = fc.string().filter((text) => !/[\r\n]/.test(text));
  const lines = fc.array(line, { maxLength: 3 });
  const sentences = fc.array(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(sentences, lines, lines, fc.nat(), (ours, above, below, at) => {
      const text = noteText(ours);
      const rest = [...above, ...below].join("\n");
      const read = readNote([...above, text, ...below].join("\n"));
      expect(read).toEqual(rest.trim() === "" ? { whose: "ours" } : { whose: "shared", rest });
      const cut = at % text.length;
      const without = text.slice(0, cut) + text.slice(cut + 1);
      expect(["changed", "theirs"]).toContain(readNote(without).whose);
    }),
  );
});
