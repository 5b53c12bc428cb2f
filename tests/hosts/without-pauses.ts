/** The pane's pauses last no time in a test: in thousands of sequences they would be seconds. */
export function withoutPauses(): void {
  const { setTimeout: wait } = globalThis;
  beforeAll(() => {
    const soon = (act: () => void, delay = 0) => (delay > 0 ? wait(act, delay) : setImmediate(act));
    Object.assign(globalThis, { setTimeout: soon });
  });
  afterAll(() => void Object.assign(globalThis, { setTimeout: wait }));
}
