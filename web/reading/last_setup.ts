// Where the instrument stood last: it stands there still until somebody says otherwise.
import { computed } from "@preact/signals";
import { isObject, textAt, valueAt } from "../job/pointer";
import { entriesOf } from "../job/strikes";
import { job } from "../state/signals";

export const lastSetup = computed(() => {
  const last = entriesOf(job.value, "/readings").findLast((entry) => isObject(valueAt(entry, "/rod")));
  return last === undefined ? "1" : textAt(last, "/rod/setup");
});
