import { liveCheck } from "../../../src/pane/state/live-check";
import { fakeHost, HEADER } from "../fake-host";

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

test("a burst of edits is checked once, within half a second of the last", async () => {
  const { host, edit } = fakeHost([HEADER]);
  const check = jest.fn(async () => true);
  await liveCheck(host, () => true, check);
  for (let i = 0; i < 20; i++) {
    edit();
    jest.advanceTimersByTime(100);
  }
  expect(check).not.toHaveBeenCalled();
  jest.advanceTimersByTime(400);
  expect(check).toHaveBeenCalledTimes(1);
});

test("an edit of another sheet is no concern", async () => {
  const { host, edit } = fakeHost([HEADER]);
  const check = jest.fn(async () => true);
  await liveCheck(host, (sheetId) => sheetId === "s1", check);
  edit("s2");
  await jest.advanceTimersByTimeAsync(1000);
  expect(check).not.toHaveBeenCalled();
});

test("a check that could not begin is asked for again", async () => {
  const { host, edit } = fakeHost([HEADER]);
  const begun = [false, false, true];
  const check = jest.fn(async () => begun.shift()!);
  await liveCheck(host, () => true, check);
  edit();
  await jest.advanceTimersByTimeAsync(5000);
  expect(check).toHaveBeenCalledTimes(3);
});

test("once stopped, not even a waiting check runs", async () => {
  const { host, edit } = fakeHost([HEADER]);
  const check = jest.fn(async () => true);
  const stop = await liveCheck(host, () => true, check);
  edit();
  await stop();
  edit();
  await jest.advanceTimersByTimeAsync(5000);
  expect(check).not.toHaveBeenCalled();
});
