import type { WorkbenchPage } from "../../tests/browser/workbench-page";

/** A picture of the workbench: what it shows, and how to get there from the one before it. */
export interface Picture {
  /** The file in docs/, without its ending. */
  readonly name: string;
  readonly heading: string;
  /** What a reader who does not see it is told. */
  readonly alt: string;
  readonly show: (workbench: WorkbenchPage) => Promise<void>;
}

const page = (name: string) => async (workbench: WorkbenchPage) => {
  await workbench.page.getByRole("tab", { name, exact: true }).click();
};

export const PICTURES: readonly Picture[] = [
  {
    name: "workbench",
    heading: "A day of tests, checked and marked",
    alt: "Findings beside the sheet, marked cells in it",
    show: async ({ page }) => {
      await page.getByRole("checkbox", { name: "Mark what is found" }).check();
      await page.getByRole("button", { name: "Check", exact: true }).click();
      await page.getByText("Marked cells").waitFor();
      await page
        .getByRole("option", { name: /correction for alcohol/ })
        .first()
        .click();
    },
  },
  {
    name: "picture-test",
    heading: "The test under the cursor, step by step",
    alt: "The pane with the steps from the readings to the reported air of one test",
    show: page("This test"),
  },
  {
    name: "picture-trend",
    heading: "The results of the day against their limits",
    alt: "The pane with a chart of air contents and its limits",
    show: page("Trend"),
  },
  {
    name: "picture-report",
    heading: "A record to print and sign",
    alt: "The pane with the report of the day",
    show: page("Report"),
  },
  {
    name: "picture-functions",
    heading: "A function found by a word of the trade",
    alt: "The pane with the help of a function, its arguments and an example to insert",
    show: async (workbench) => {
      await page("Functions")(workbench);
      await workbench.page.getByRole("searchbox").fill("unit weight");
      await workbench.page.locator(".functions summary").first().click();
    },
  },
  {
    name: "picture-paper",
    heading: "The first page of the record on paper",
    alt: "A printed page: project, specification, counts and the table of every test",
    show: async ({ page }) => {
      // A sheet of letter paper at the resolution of a screen.
      await page.setViewportSize({ width: 816, height: 1056 });
      await page.emulateMedia({ media: "print" });
      await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
      // A printer leaves an edge.
      await page.addStyleTag({ content: ".fresh-paper { padding: 14mm 12mm }" });
    },
  },
];
