/** So many answers are kept; then all are let go, so that memory does not grow with what is read. */
const MOST = 5000;

/** The same function, which remembers its answers: headers are looked at again with every check. */
export function remembered<A, B>(work: (of: A) => B, keyOf: (of: A) => string): (of: A) => B {
  const answers = new Map<string, B>();
  return (of) => {
    const key = keyOf(of);
    const known = answers.get(key);
    if (known !== undefined) return known;
    if (answers.size >= MOST) answers.clear();
    const answer = work(of);
    answers.set(key, answer);
    return answer;
  };
}
