/** Holds a state and tells those who watch a part of it when that part has changed. */
export interface Store<S> {
  get(): S;
  set(change: Partial<S>): void;
  /** Calls `then` now and after each change of what `pick` gives. */
  watch<T>(pick: (state: S) => T, then: (picked: T) => void): void;
}

export function createStore<S extends object>(first: S): Store<S> {
  let state = first;
  const watchers = new Set<() => void>();
  return {
    get: () => state,
    set(change) {
      state = { ...state, ...change };
      for (const look of watchers) look();
    },
    watch(pick, then) {
      let last = pick(state);
      watchers.add(() => {
        const picked = pick(state);
        if (Object.is(picked, last)) return;
        last = picked;
        then(picked);
      });
      then(last);
    },
  };
}
