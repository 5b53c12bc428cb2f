import { openWorkbench } from "./workbench-under-test";

jest.mock("@univerjs/core", () => jest.requireActual("./headless-univer").loadHeadlessUniver());
jest.mock("@univerjs/preset-sheets-core", () => jest.requireMock("@univerjs/core"));

test("a named table is read whole, blank rows in it included, and still after a row is inserted", async () => {
  const { api, host, fill, select, insertRow, close } = openWorkbench();
  fill([
    ["Sample", "Air"],
    ["S-1", 5.5],
    [null, null],
    ["S-2", 6],
  ]);
  api.getActiveWorkbook()!.insertDefinedName("Tests", "'Loads'!$A$1:$B$4");
  select([1, 1, 1, 1]);
  expect((await host.read("table")).address).toBe("Loads!A1:B4");
  insertRow(1);
  expect((await host.read("table")).address).toBe("Loads!A1:B5");
  select([8, 4, 1, 1]);
  await expect(host.read("table")).rejects.toMatchObject({ id: "selection-empty" });
  close();
});
