import {
  createPaneStore,
  keptSettings,
  stateFromSettings,
} from "../../../src/pane/state/pane-state";

test("what is kept comes back", () => {
  const store = createPaneStore();
  store.set({ marking: true, low: "4.5", live: true, withNotes: false });
  const now = createPaneStore().get();
  expect(stateFromSettings(keptSettings(store.get()), now)).toMatchObject({
    marking: true,
    low: "4.5",
    live: true,
    withNotes: false,
  });
});

test("settings that somebody changed, or of another version, do no harm", () => {
  const now = createPaneStore().get();
  const kept = { marking: "always", low: 4.5, live: "yes", checked: "x", error: "gotcha" };
  expect(stateFromSettings(kept, now)).toEqual({});
});

test("those who watch a part of the state are told of its changes alone", () => {
  const store = createPaneStore();
  const told: string[] = [];
  store.watch(
    ({ low }) => low,
    (low) => told.push(low),
  );
  store.set({ high: "7.5" });
  store.set({ low: "4.5" });
  store.set({ low: "4.5" });
  expect(told).toEqual(["", "4.5"]);
});
