/** Holds a state and tells those who watch a part of it when that part has changed. */
export interface Store<S> {
  get(): S;
  set(change: Partial<S>): void;
  /** Calls `then` now and after each change of what `pick` gives, until what it gives is called. */
  watch<T>(pick: (state: S) => T, then: (picked: T) => void): () => void;
}

/** The same store for what is shown of it, whose watchers are all forgotten together. */
export function shownOf<S>(store: Store<S>): Store<S> & { forget(): void } {
  const watched: (() => void)[] = [];
  return {
    ...store,
    watch(pick, then) {
      const stop = store.watch(pick, then);
      watched.push(stop);
      return stop;
    },
    forget: () => watched.splice(0).forEach((stop) => stop()),
  };
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
      const look = () => {
        const picked = pick(state);
        if (Object.is(picked, last)) return;
        last = picked;
        then(picked);
      };
      watchers.add(look);
      then(last);
      return () => watchers.delete(look);
    },
  };
}
