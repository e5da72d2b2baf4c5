import { widthOfText } from '../lettering/metrics.ts';

/** Notes on a plate: height of capitals and distance of lines, mm. */
export const NOTE_HEIGHT = 2.5;
export const NOTE_LEADING = 4.6;

/** Notes in lines no wider than so many mm, broken at spaces. */
export function linesOfNotes(notes: readonly string[], width: number): readonly string[] {
  return notes.flatMap((note) => {
    const lines: string[] = [];
    let current = '';
    for (const word of note.split(' ')) {
      const longer = current === '' ? word : `${current} ${word}`;
      if (current !== '' && widthOfText(longer, NOTE_HEIGHT, 'regular') > width) {
        lines.push(current);
        current = word;
      } else current = longer;
    }
    return [...lines, current];
  });
}
