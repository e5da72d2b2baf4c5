import type { Vec } from '../../../geometry/index.ts';
import type { Laid } from '../api.ts';
import type { SawWay } from '../ways-to-saw.ts';

/** What a line of the picture is, and the type of line that it is drawn with. */
export interface PictureLine {
  readonly what:
    | 'fence'
    | 'table'
    | 'work'
    | 'work-below'
    | 'break'
    | 'waste'
    | 'blade'
    | 'square'
    | 'angle'
    | 'stop'
    | 'wedge'
    | 'auxiliary';
  readonly type: 'wide' | 'narrow' | 'dashed' | 'chain' | 'double-chain';
  readonly points: readonly Vec[];
  readonly closed: boolean;
}

export interface PictureLabel {
  readonly what:
    | 'fence'
    | 'side-at-fence'
    | 'side-up'
    | 'kept-end'
    | 'sawn-end'
    | 'swing'
    | 'tilt'
    | 'stop'
    | 'sawyer'
    | 'side-down'
    | 'wedge'
    | 'auxiliary'
    | 'clamp';
  readonly at: Vec;
  readonly text: string;
}

export interface PictureView {
  readonly lines: readonly PictureLine[];
  readonly labels: readonly PictureLabel[];
}

/** Two views of a saw set for one cut; mm, full size, y up, each from where the blade meets fence or table. */
export interface SettingPicture {
  /** From above, the sawyer below: x to the right along the fence, y away. */
  readonly plan: PictureView;
  /** Along the line of cut, as the sawyer looks: x to the right, y up from the table. */
  readonly tilt: PictureView;
  /** The wedge to make, where one is needed. */
  readonly wedge?: WedgePicture;
}

/** A wedge as it is sawn, mm at full size, its thin end at the origin: the run that its rise is given over, and the rise. */
export interface WedgePicture {
  readonly run: number;
  readonly rise: number;
  /** rad. */
  readonly angle: number;
}

/** How the work lies and is set: of a way to hold it with what it is held by. */
export type SetWork = Laid & Partial<Pick<SawWay, 'kind' | 'turned' | 'wedge'>>;

/** The work on the saw: its height over the table and its extent square to the fence, mm. */
export interface WorkSize {
  readonly high: number;
  readonly across: number;
}
