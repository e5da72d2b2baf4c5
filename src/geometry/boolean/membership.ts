/** Does a point belong to the result, given how often each operand winds round it? */
export type Membership = (winding0: number, winding1: number) => boolean;
