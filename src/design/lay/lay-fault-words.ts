import { formatAngle } from '../../measure/index.ts';
import type { LayFault } from '../../wood/index.ts';

/** One fault of a placement in words. */
export function layFaultWords({ kind, id, board, other, defect, measured }: LayFault): string {
  const angle = (rad = 0): string => formatAngle(rad, { unit: 'deg', decimals: 1 });
  const area = `${Math.round(measured ?? 0)} mm²`;
  switch (kind) {
    case 'unknown-board':
      return `${id} lies on ${board}, and there is no such board.`;
    case 'unknown-part':
      return `on ${board} lies ${id}.`;
    case 'wrong-board':
      return `${id} may not come from ${board}: too thin, of another wood, or not of its bookmatch.`;
    case 'off-the-board':
      return `${id} runs off ${board} by ${area}.`;
    case 'overlap':
      return `${id} lies over ${other} on ${board}, or too near to it, by ${area}.`;
    case 'over-a-defect':
      return `${id} lies over ${defect === 'other' ? 'a defect' : `a ${defect}`} of ${board} by ${area}.`;
    case 'off-the-grain':
      return `the grain of ${id} stands ${angle(measured)} off that of ${board}.`;
    case 'wrong-face':
      return `${id} lies with its wrong face up on ${board}: its leaf would be turned over.`;
    case 'laid-twice':
      return `${id} is laid twice.`;
    default:
      return kind satisfies never;
  }
}
