export const finishInside = (_t: unknown, { bodice }: any): any => bodice;
