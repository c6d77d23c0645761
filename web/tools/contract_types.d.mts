/// The generated text of one document's types.
export function typesOf(name: string): Promise<string>;
/// The names of the documents whose file in engine/generated is not up to date.
export function drifted(): Promise<string[]>;
