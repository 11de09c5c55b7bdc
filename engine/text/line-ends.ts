/** Where a line may end: not between the whole and the fraction of a figure, nor before its unit. */
export const lineEnds = / +(?!(?<=\d )(?:\d+\/\d|(?:mm|cm|m|in|yd|kPa|mN)\b|%))/;
