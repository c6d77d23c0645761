// Jobs on this device. Nothing here throws: what can go wrong comes back as a Trouble, with the job's text where there is
// one, so that the page can always offer it as a file.
//
// Words: "kept" is what this browser holds; "filed" is what is outside the browser, in a file. Only the second is safe.
//
//   const keep = await openKeep();
//   keep.jobs.value                              // heads, newest change first; a signal
//   const opened = await keep.create(text);      // or keep.open(id), keep.takeIn(text, "shed.json")
//   if (opened.ok) opened.value.store(newText)   // after every change; awaited, its Trouble shown
export { pickFile, pickNames, readFile, saveBytes } from "./files";
export { openKeep } from "./keep";
export type { JobHead, Keep, Kept, OpenJob, Trouble } from "./types";
