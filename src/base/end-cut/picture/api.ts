import type { Vec } from '../../../geometry/index.ts';

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
    | 'stop';
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
    | 'side-down';
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
}

/** The work on the saw: its height over the table and its extent square to the fence, mm. */
export interface WorkSize {
  readonly high: number;
  readonly across: number;
}
