import { openWorkbench } from "./workbench-under-test";

jest.mock("@univerjs/core", () => jest.requireActual("./headless-univer").loadHeadlessUniver());
jest.mock("@univerjs/preset-sheets-core", () => jest.requireMock("@univerjs/core"));

test("cells that a formula spills into are read as what they show", async () => {
  const { api, host, select, close } = openWorkbench();
  const sheet = api.getActiveWorkbook()!.getActiveSheet();
  sheet.getRange("B2").setFormula("=SEQUENCE(3,1,5)");
  await api.getFormula().onCalculationResultApplied();
  select([1, 1, 1, 1]);
  const { address, values } = await host.read("table");
  expect(address).toBe("Loads!B2:B4");
  expect(values).toEqual([[5], [6], [7]]);
  close();
});
