// Reading aloud, only by voices that are on the device: nothing leaves it.

/// Units in words and millimetres digit by digit: 4'-7 5/8" -> "4 feet 7 and 5 over 8 inches".
export function spoken(text: string): string {
  return text
    .replaceAll("×", "of")
    .replaceAll(/(\d+)'-?/g, "$1 feet ")
    .replaceAll(/(\d+) (\d+)\/(\d+)"/g, "$1 and $2 over $3 inches")
    .replaceAll(/(\d+)\/(\d+)"/g, "$1 over $2 inch")
    .replaceAll(/(\d+)"/g, "$1 inches")
    .replaceAll(/(\d+) mm/g, (_, digits: string) => `${digits.split("").join(" ")} millimetres`)
    .replaceAll(/\s+/g, " ")
    .trim();
}

/// Voices come some time after the first asking.
export function wakeVoices(): void {
  if ("speechSynthesis" in globalThis) speechSynthesis.getVoices();
}

/// False where the device has no voice of its own.
export function sayAloud(text: string): boolean {
  if (!("speechSynthesis" in globalThis)) return false;
  const voice = speechSynthesis.getVoices().find((one) => one.localService && one.lang.startsWith("en"));
  if (voice === undefined) return false;
  speechSynthesis.cancel();
  const words = new SpeechSynthesisUtterance(spoken(text));
  words.voice = voice;
  words.rate = 0.9;
  speechSynthesis.speak(words);
  return true;
}
