import { type BuiltBase, topFixings } from '../../base/index.ts';
import { cautions } from '../../checks/index.ts';
import { woodCalled } from '../../materials/index.ts';
import type { BookChapter, ShopBook } from '../../print/index.ts';
import type { Computed } from '../computed.ts';
import { designLink } from '../link/design-link.ts';
import type { ComputedWood } from '../wood-of-design.ts';
import { glueChapter, handChapter, topChapter } from './assembly-chapters.ts';
import { boardsChapter } from './boards-chapter.ts';
import type { BookStyle } from './book-style.ts';
import { jointsChapter } from './joints-chapter.ts';
import { movementChapter } from './movement-chapter.ts';
import { cutListChapter, partList } from './part-chapters.ts';
import { resawChapter } from './resaw-chapter.ts';
import { sawChapter } from './saw-chapter.ts';
import { errorsChapter, standingChapter } from './standing-chapter.ts';
import { viewChapters } from './view-chapters.ts';
import { drillingChapter, leafChapter } from './wood-chapters.ts';

/** The printed set that a base is built from, in the order of work. Throws for a design of parts alone. */
export function shopBookOf(computed: Computed): ShopBook {
  const { base: built, lengths, design, parts, wood } = computed;
  if (built === undefined) throw new RangeError('only a base has a shop book');
  const style: BookStyle = { lengths };
  const topWood = woodCalled(design.base?.wood ?? 'white oak')!;
  const views = viewChapters(computed, built);
  const chapters: readonly BookChapter[] = [
    { title: 'The base', newPage: false, blocks: views.base },
    partList(built, style),
    cutListChapter(built, style),
    findingsChapter(computed),
    {
      title: 'Before cutting',
      newPage: false,
      blocks: [
        {
          kind: 'list',
          numbered: false,
          items: parts[0] === undefined ? [] : cautions(parts[0].routing.tooling, lengths),
        },
      ],
    },
    { title: 'Each part', newPage: false, blocks: views.parts },
    boardsChapter(computed, style),
    ...(wood === undefined ? [] : woodChapters(wood, built, style)),
    jointsChapter(built, style),
    sawChapter(built, style),
    glueChapter(built, style),
    topChapter(built, wood?.top ?? topFixings(built.base, topWood), style),
    ...(wood === undefined || design.wood?.top === undefined ? [] : [drillingChapter(wood, built, style)]),
    handChapter(parts, built, style),
    standingChapter(built, style),
    errorsChapter(built, style),
    designChapter(computed),
  ];
  return {
    title: design.name,
    about: `The shop book, in the order of work. Patterns at full size are printed beside it. What a maker of tools, local codes or licensed practice say goes before anything printed here.`,
    opening: [views.pictorial, { kind: 'heading', text: 'Contents' }, { kind: 'contents' }],
    chapters: chapters.filter(({ blocks }) => blocks.length > 0),
  };
}

/** The chapters of the wood by themselves; none for a design of parts alone. */
export function woodOfBook({ base, lengths, wood }: Computed): readonly BookChapter[] {
  if (base === undefined || wood === undefined) return [];
  const chapters = [...woodChapters(wood, base, { lengths }), drillingChapter(wood, base, { lengths })];
  return chapters.filter(({ blocks }) => blocks.length > 0);
}

/** The board before the joints: what moves, how it is resawn, which leaf goes where. */
function woodChapters(wood: ComputedWood, built: BuiltBase, style: BookStyle): readonly BookChapter[] {
  return [
    movementChapter(wood, built, style),
    resawChapter(wood.stacks, style),
    leafChapter(wood.matches, style),
  ];
}

/** The design itself, so that it can be taken up again from this book alone. */
function designChapter({ design, grids }: Computed): BookChapter {
  const link = designLink({ ...design, grids }, design.site);
  return { title: 'The design', newPage: false, blocks: [{ kind: 'link', link, design: design.name }] };
}

function findingsChapter({ findings }: Computed): BookChapter {
  const said = findings.filter(({ severity }) => severity !== 'note');
  return {
    title: 'What the checks say',
    newPage: false,
    blocks:
      said.length === 0
        ? []
        : [
            {
              kind: 'list',
              numbered: false,
              items: said.map(
                ({ severity, message, cure }) =>
                  `${severity === 'stop' ? 'STOP' : 'Caution'}: ${message}${cure === undefined ? '' : ` ${cure}`}`,
              ),
            },
          ],
  };
}
