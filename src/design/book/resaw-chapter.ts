import { resawDrawing } from '../../drawing/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import {
  backingNeeded,
  boardNeeded,
  mostDrift,
  mostLeaves,
  type ResawPlan,
  type ResawStack,
  roughNeeded,
} from '../../wood/index.ts';
import { type BookStyle, fine, roughUp } from './book-style.ts';

/** From the rough board to the finished piece: every loss, what the board must have, and what a drifting saw does. */
export function resawChapter(stacks: readonly ResawStack[], style: BookStyle): BookChapter {
  return {
    title: 'Resawing',
    newPage: false,
    blocks: stacks.flatMap((stack) => stackBlocks(stack, style)),
  };
}

function stackBlocks(stack: ResawStack, style: BookStyle): readonly BookBlock[] {
  const { plan, leaves, flat, asSawn, thinnest, leastThinnest, reaches, leastReaches } = stack;
  const { scene, scale } = resawDrawing(stack, style.lengths);
  const say = (mm: number): string => fine(mm, style);
  return [
    {
      kind: 'heading',
      text: `${plan.name}: ${plan.leaves} ${plan.leaves === 1 ? 'leaf' : 'leaves'} of a board`,
    },
    {
      kind: 'text',
      text: `A rough board of ${say(plan.rough)} is flattened to ${say(flat)} and resawn into ${plan.leaves} of ${say(asSawn)} each. Stack the leaves with stickers or clamp them for a week; they cup within days, and are planed only then. The thinnest is ${say(thinnest)} as it is glued. ${pieceWords(plan)}, less the last planing, makes ${say(reaches)}; finished is ${say(plan.finished)}.`,
    },
    {
      kind: 'drawing',
      scene,
      caption: `Scale ${scale}: hatched is planed off, black is the kerf, grey what drying takes, dashed where the saw may drift to`,
    },
    {
      kind: 'table',
      columns: [
        { head: 'Leaf' },
        { head: 'As sawn', align: 'right' },
        { head: 'Sawn faces', align: 'right' },
        { head: 'As glued', align: 'right' },
        { head: 'As glued, if the saw drifts', align: 'right' },
      ],
      rows: leaves.map(({ number, sawn, sawnFaces, thickness, leastThickness }) => [
        `${number}`,
        say(sawn.to - sawn.from),
        `${sawnFaces}`,
        say(thickness),
        say(leastThickness),
      ]),
    },
    {
      kind: 'table',
      columns: [
        { head: 'What', share: 3 },
        { head: 'Figure', align: 'right', share: 2 },
      ],
      rows: neededRows(stack, style),
    },
    {
      kind: 'text',
      text:
        leastReaches < plan.finished
          ? `The piece falls short: ${reaches < plan.finished ? 'even with a true cut' : 'should the saw drift'}.`
          : `Should the saw drift by ${say(plan.drift)}, the thinnest leaf is ${say(leastThinnest)} and the piece still comes to ${say(leastReaches)}.`,
    },
    {
      kind: 'text',
      text: 'At the saw: guard just over the work, a push block for the last part, a feather board before the blade and not beside it, and an eye for a kerf that closes as stress is let go. What the maker of the saw says goes before this.',
    },
  ];
}

function pieceWords({ backing, glued }: ResawPlan): string {
  const leaf = glued === 1 ? 'One leaf' : 'Two leaves';
  return backing > 0 ? `${leaf} and the backing` : leaf;
}

function neededRows({ plan }: ResawStack, style: BookStyle): readonly (readonly string[])[] {
  const say = (mm: number): string => fine(mm, style);
  const board = boardNeeded(plan);
  const drift = mostDrift(plan);
  return [
    [
      'Rough board needed, drift counted in',
      `${roughUp(roughNeeded(plan), style).text}${board === undefined ? '' : `: sold as ${board.quarters}/4`}`,
    ],
    ['Most leaves from this board, as planned', `${mostLeaves(plan, 'as planned')}`],
    ['Most leaves from this board, if the saw drifts', `${mostLeaves(plan, 'drifts')}`],
    ['Least backing, drift counted in', say(backingNeeded(plan))],
    ['The saw may drift by at most', Number.isFinite(drift) ? say(drift) : 'nothing is resawn'],
  ];
}
