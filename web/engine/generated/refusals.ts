// Made by tools/contract_types.mjs from docs/schema/refusals.schema.json. Not to be changed by hand.

/**
 * Why a job cannot be planned: what --json prints when the exit code is 3 and no answer exists.
 */
export interface StringcourseRefusals {
  /**
   * version of this document
   */
  readonly stringcourse_refusals: number;
  readonly refusals: Refusal[];
  /**
   * refusals not shown
   */
  readonly beyond: number;
}
/**
 * One thing that stops the work.
 */
export interface Refusal {
  readonly code: string;
  /**
   * JSON pointer into the job
   */
  readonly place: string;
  readonly reason: string;
  readonly remedy: string;
}
