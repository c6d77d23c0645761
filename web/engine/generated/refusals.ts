// Made by tools/contract_types.mjs from docs/schema/refusals.schema.json. Not to be changed by hand.

/**
 * Why a job cannot be planned: what --json prints when the exit code is 3 and no answer exists.
 */
export interface StringcourseRefusals {
  readonly stringcourse_refusals: 1;
  readonly refusals: {
    readonly code: string;
    /**
     * JSON pointer into the job
     */
    readonly place: string;
    readonly reason: string;
    readonly remedy: string;
  }[];
  /**
   * refusals not shown
   */
  readonly beyond: number;
}
