import { say } from "../../messages/pane-catalogue";
import type { PaneStore } from "./pane-state";
import { problemSentence } from "../kit/problem-sentence";

/** Work under way, as it sees itself. */
export interface Job {
  /** Shows how far the work is, lets the page breathe, and ends the work when it was stopped. */
  pause(share?: number): Promise<void>;
  /** Shows what the work is at, and ends the work when it was stopped. */
  tell(label: string): void;
  /** Says what is true of the sheet where the work is stopped from now on. */
  ifStopped(sentence: string): void;
}

/** What is said while a command is under way. */
type WorkLabel = `pane-${"checking" | "reading-column" | "marking" | "unmarking" | "writing"}`;

/** Runs the pane's commands. */
export interface Runner {
  /**
   * Runs a command unless another is under way. What it returns is shown as what was done; what it
   * throws as a sentence.
   *
   * @param canStop Whether the work pauses, so that it can be stopped.
   * @returns false where another was under way.
   */
  run(label: WorkLabel, work: (job: Job) => Promise<string>, canStop?: boolean): Promise<boolean>;
  /** Ends the command under way at its next pause. */
  stop(): void;
}

class Stopped extends Error {}

export function oneAtATime(store: PaneStore): Runner {
  let stopped = false;
  let saidOfSheet = "";
  const job: Job = {
    ifStopped: (sentence) => (saidOfSheet = sentence),
    async pause(share) {
      const { work } = store.get();
      if (work) store.set({ work: { ...work, share } });
      await new Promise((resolve) => setTimeout(resolve));
      if (stopped) throw new Stopped();
    },
    tell(label) {
      if (stopped) throw new Stopped();
      const { work } = store.get();
      if (work) store.set({ work: { ...work, label } });
    },
  };
  return {
    async run(label, work, canStop = false) {
      if (store.get().work) return false;
      stopped = false;
      saidOfSheet = say("pane-stopped");
      store.set({ work: { label: say(label), canStop }, error: "", status: "" });
      try {
        const status = await work(job);
        store.set({ status });
      } catch (error) {
        if (error instanceof Stopped) store.set({ status: saidOfSheet });
        else store.set({ error: problemSentence(error) });
      } finally {
        store.set({ work: undefined });
      }
      return true;
    },
    stop() {
      stopped = true;
    },
  };
}
