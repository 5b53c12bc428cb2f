/**
 * The examples that stand in the comments of worksheet functions, such as
 * `@example =FRESH.AIR(6, 0, "48 oz") gives 5.75 [6.00 − 0.30 = 5.70]`.
 *
 * @param {string} source Text of a file that declares worksheet functions.
 * @returns By the name of the function; `from` is the source of the result, or its working.
 */
export function examplesIn(source) {
  const comments = source.matchAll(/@customfunction (\S+)[^]*?\*\//g);
  return new Map(
    [...comments].map(([comment, name]) => {
      const lines = comment.matchAll(/@example (.*)/g);
      return [/** @type {string} */ (name), [...lines].map(([, line]) => exampleIn(line.trim()))];
    }),
  );
}

/** @param {string} line */
function exampleIn(line) {
  const parts = /^(?<formula>=FRESH\..*?\)) gives (?<gives>.*) \[(?<from>.*)\]$/.exec(line);
  if (!parts) throw new Error(`Not “=… gives … [source]”: ${line}`);
  return /** @type {{ formula: string; gives: string; from: string }} */ (parts.groups);
}

/**
 * The arguments of a formula that is one call, each as it is written.
 *
 * @param {string} formula
 * @returns {string[]}
 */
export function argumentsIn(formula) {
  const inside = formula.slice(formula.indexOf("(") + 1, -1);
  return inside.match(/("[^"]*"|\{[^}]*\}|[^,"{])+/g).map((argument) => argument.trim());
}

/**
 * What the workbench shows beside a function while a formula is typed: of each function the arguments
 * of the example that gives the most of them.
 *
 * @param {readonly { data: Buffer }[]} files The files that declare worksheet functions.
 */
export function examplesFile(files) {
  const examples = files.flatMap(({ data }) => [...examplesIn(data.toString())]);
  const fullest = (/** @type {ReturnType<typeof exampleIn>[]} */ all) =>
    all
      .map(({ formula }) => argumentsIn(formula))
      .reduce((most, each) => (each.length > most.length ? each : most), []);
  return JSON.stringify(Object.fromEntries(examples.map(([name, all]) => [name, fullest(all)])));
}
