import { describeHost } from "../contract";
import { openWorkbench } from "./workbench-under-test";

jest.mock("@univerjs/core", () => jest.requireActual("./headless-univer").loadHeadlessUniver());
jest.mock("@univerjs/preset-sheets-core", () => jest.requireMock("@univerjs/core"));

describeHost("the workbench host, on the real spreadsheet", openWorkbench);
