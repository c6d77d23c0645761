// One writer for a job among all tabs, by the browser's locks.

/// The part of navigator.locks that is used; a test gives its own.
export interface Locks {
  request<T>(
    name: string,
    options: { readonly ifAvailable?: boolean; readonly signal?: AbortSignal },
    act: (lock: object | null) => Promise<T>,
  ): Promise<T>;
}

/// A right to write, held until it is given up.
export interface Right {
  /// Done when another tab can have it.
  giveUp(): Promise<void>;
}

const kFree: Right = { giveUp: async () => undefined };

function lockName(id: string): string {
  return `stringcourse-job-${id}`;
}

type Options = { readonly ifAvailable?: boolean; readonly signal?: AbortSignal };

function held(locks: Locks, id: string, options: Options): Promise<Right | undefined> {
  return new Promise((resolve, reject) => {
    const ended = locks.request(lockName(id), options, (lock) => {
      if (lock === null) {
        resolve(undefined);
        return Promise.resolve();
      }
      return new Promise<void>((free) => {
        const giveUp = (): Promise<void> => {
          free();
          return ended;
        };
        resolve({ giveUp });
      });
    });
    ended.catch(reject);
  });
}

/// The right to write this job if no other tab has it. Without locks in the browser everyone has it: Store.writeText
/// then still refuses to write over a text that this tab has not seen.
export async function rightNow(locks: Locks | undefined, id: string): Promise<Right | undefined> {
  return locks === undefined ? kFree : held(locks, id, { ifAvailable: true });
}

/// The same, as soon as the tab that has it gives it up; undefined if `signal` ends the waiting.
export async function rightLater(locks: Locks, id: string, signal: AbortSignal): Promise<Right | undefined> {
  return held(locks, id, { signal }).catch(() => undefined);
}
