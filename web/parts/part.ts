// A part of the page that is fetched when it is first wanted, and then stays.
import { type ReadonlySignal, signal } from "@preact/signals";
import type { FunctionComponent } from "preact";

export interface Part {
  /// What shows it; undefined until it has come.
  readonly view: ReadonlySignal<FunctionComponent | undefined>;
  /// It could not be fetched when it was last asked for.
  readonly failed: ReadonlySignal<boolean>;
  /// Fetches it unless it is there or on its way; what failed is tried anew.
  fetch(): Promise<void>;
}

export function part(load: () => Promise<FunctionComponent>): Part {
  const view = signal<FunctionComponent | undefined>(undefined);
  const failed = signal(false);
  let coming: Promise<void> | undefined;
  const came = (shows: FunctionComponent): void => {
    view.value = shows;
  };
  const lost = (): void => {
    failed.value = true;
    coming = undefined;
  };
  return {
    view,
    failed,
    fetch() {
      if (coming === undefined) failed.value = false;
      coming ??= load().then(came, lost);
      return coming;
    },
  };
}
