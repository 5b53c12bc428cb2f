import { settingsFromText } from "../../src/hosts/settings-text";

// Our own rule: what somebody else may have written never stops the pane.
test.each([
  ['{"low":"4.5","live":true,"n":2}', { low: "4.5", live: true, n: 2 }],
  ['{"low":["4.5"],"live":null,"scope":"table"}', { scope: "table" }],
  ["{}", {}],
  ["[1,2]", {}],
  ["null", {}],
  ["{broken", {}],
  ["", {}],
  [null, {}],
  [{ low: "4.5" }, {}],
])("kept %j gives the settings %j", (kept, settings) => {
  expect(settingsFromText(kept)).toEqual(settings);
});
