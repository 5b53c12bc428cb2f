import "../functions/custom-functions-runtime";
import { shown } from "../functions/custom-functions-runtime";
import { startExcel } from "../excel-client/excel-client";
import { handedOver } from "../excel-client/handed-over";
import { cellAt } from "../excel-client/block";
import { edit } from "../excel-client/user-edits";
import { blankCellsSentence } from "../../src/pane/blank-cells-view";
import { excelHost } from "../../src/hosts/excel/excel-host";

/*
 * What the functions know of how blank cells come to them. CustomFunctionsRuntime 1.5 is the first set that
 * came after the last report of blanks as zeros (versions: learn.microsoft.com, custom functions
 * requirement sets; reports: office-js issues 1951, 4702, 5262).
 */

const excel = startExcel();
const context = Office.context as unknown as { diagnostics: unknown; requirements: unknown };
const { diagnostics, requirements } = context;

/** The functions as one session of Excel loads them. */
function session() {
  let loaded!: {
    final: (...given: unknown[][][]) => unknown[][];
    blankTest: (cells: unknown[][]) => unknown[][];
    how: () => string;
  };
  jest.isolateModules(() => {
    require("../../src/functions-in-excel/blank-cells");
    loaded = {
      final: require("../../src/functions/volumetric-air").readingFinal,
      blankTest: require("../../src/functions/blank-test").blankTest,
      how: require("../../src/hosts/excel/blank-cells").howBlanksCome,
    };
  });
  const sheet = excel.workbook.front;
  edit(sheet, 0, 0, 5.5);
  edit(sheet, 2, 0, 0);
  const at = (row: number) => handedOver(excel, sheet, cellAt(row, 0));
  return {
    /** The final of 5.5 and a blank second reading. */
    final: () => shown(() => loaded.final(at(0), at(1))),
    /** The final of 5.5 and a second reading of 0. */
    finalWithZero: () => shown(() => loaded.final(at(0), at(2))),
    test: () => shown(() => loaded.blankTest(at(1))),
    testOfZero: () => shown(() => loaded.blankTest(at(2))),
    how: loaded.how,
  };
}

const SECOND_NEEDED = /^#N\/A A second reading is needed/;
const ZERO_OR_BLANK = /^#VALUE! Second: the cell is 0 or blank: this Excel may hand over/;
const THIRD_NEEDED = /^#N\/A A third reading is needed/;

beforeEach(() => {
  const kept = new Map<string, string>();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    },
  });
  excel.blanksAsZero = false;
  excel.customFunctionsSet = 5;
  Object.assign(context, { diagnostics, requirements });
});

test("an Excel of April 2025 or later is trusted, and its zeros are zeros", () => {
  const { final, finalWithZero, how } = session();
  expect(how()).toBe("blank");
  expect(finalWithZero()).toMatch(THIRD_NEEDED);
  expect(final()).toMatch(SECOND_NEEDED);
});

describe("an Excel of before that, such as Office 2021 and 2024", () => {
  beforeEach(() => {
    excel.customFunctionsSet = 3;
  });

  test("that makes zeros of blanks: the function says so in place of a number", () => {
    excel.blanksAsZero = true;
    const { final, finalWithZero, how } = session();
    expect(how()).toBe("unknown");
    expect(final()).toMatch(ZERO_OR_BLANK);
    expect(finalWithZero()).toMatch(ZERO_OR_BLANK);
  });

  test("that hands over blanks as blanks: in doubt until the first of them has come", () => {
    const { final, finalWithZero, how } = session();
    expect(finalWithZero()).toMatch(ZERO_OR_BLANK);
    expect(final()).toMatch(SECOND_NEEDED);
    expect(finalWithZero()).toMatch(THIRD_NEEDED);
    expect(how()).toBe("blank");
  });

  test("FRESH.BLANK.TEST tells it, also for the next session with this version", () => {
    const { test: blankTest, finalWithZero } = session();
    expect(blankTest()).toBe("blank");
    expect(finalWithZero()).toMatch(THIRD_NEEDED);
    expect(session().finalWithZero()).toMatch(THIRD_NEEDED);
    context.diagnostics = { platform: "PC", version: "16.0.14332.20100" };
    expect(session().finalWithZero()).toMatch(ZERO_OR_BLANK);
  });

  test("FRESH.BLANK.TEST tells that it makes zeros of them", () => {
    excel.blanksAsZero = true;
    const { test: blankTest, final, how } = session();
    expect(blankTest()).toBe("zero");
    expect(how()).toBe("zero");
    expect(final()).toMatch(ZERO_OR_BLANK);
  });

  test("nothing can be kept: it is seen again in each session", () => {
    Object.assign(globalThis, {
      localStorage: {
        getItem: () => {
          throw new Error("not allowed");
        },
        setItem: () => {
          throw new Error("not allowed");
        },
      },
    });
    const { final, finalWithZero } = session();
    expect(final()).toMatch(SECOND_NEEDED);
    expect(finalWithZero()).toMatch(THIRD_NEEDED);
    expect(session().finalWithZero()).toMatch(ZERO_OR_BLANK);
  });
});

test("a newer Excel that makes zeros of blanks all the same is found out by FRESH.BLANK.TEST", () => {
  excel.blanksAsZero = true;
  const { test: blankTest, final, how } = session();
  expect(blankTest()).toBe("zero");
  expect(how()).toBe("zero");
  expect(final()).toMatch(ZERO_OR_BLANK);
});

test("a cell with a 0 that is taken for a blank one does no lasting harm", () => {
  const { test: blankTest, testOfZero, finalWithZero } = session();
  expect(testOfZero()).toBe("zero");
  expect(finalWithZero()).toMatch(ZERO_OR_BLANK);
  expect(blankTest()).toBe("blank");
  expect(testOfZero()).toBe("zero");
  expect(finalWithZero()).toMatch(THIRD_NEEDED);
});

test("as long as Office is not ready nothing is taken for sure, and then it is asked again", () => {
  Object.assign(context, { diagnostics: undefined, requirements: undefined });
  const { finalWithZero } = session();
  expect(finalWithZero()).toMatch(ZERO_OR_BLANK);
  Object.assign(context, { diagnostics, requirements });
  expect(finalWithZero()).toMatch(THIRD_NEEDED);
});

test("the workbench, which hands over blanks as blanks, says so", () => {
  const { CustomFunctions: runtime } = globalThis as unknown as { CustomFunctions: object };
  Object.assign(runtime, { handsOverBlanks: true });
  excel.customFunctionsSet = 3;
  expect(session().finalWithZero()).toMatch(THIRD_NEEDED);
  delete (runtime as { handsOverBlanks?: true }).handsOverBlanks;
});

test("the pane says what is known, and nothing where blanks are blanks", () => {
  const { howBlanksCome } = excelHost();
  const said = () => blankCellsSentence(howBlanksCome!());
  expect(said()).toBe("");
  excel.customFunctionsSet = 3;
  expect(said()).toMatch(/^It is not known .* =FRESH\.BLANK\.TEST of a blank cell/);
  excel.blanksAsZero = true;
  session().test();
  expect(said()).toMatch(/^In this Excel a blank cell reaches the worksheet functions as 0/);
});
