import type { TaughtDimension, TaughtPlace } from './dimension.ts';
import { Label, type LabelRoom } from './label.tsx';

interface MeasuredProps {
  readonly dimension: TaughtDimension;
  readonly mm: number;
  readonly labelRoom: LabelRoom;
  /** Beyond it words stand before a line, where there is room for them. */
  readonly middle: number;
  readonly amount: string;
}

/** A length on the drawing: a line with a bar at each end, the line itself that is so long, or its parts there; or an angle. */
export function Measured({ dimension, mm, labelRoom, middle, amount }: MeasuredProps) {
  if (dimension.kind === 'line') return <path class="measured" d={dimension.d} />;
  if (dimension.kind === 'angle') {
    const { d, middleOf } = sector(dimension);
    return (
      <g class="measured">
        <path d={d} />
        <Label
          x={middleOf.x + 6 * mm * (middleOf.x > middle ? -1 : 1)}
          y={middleOf.y}
          ends={middleOf.x > middle}
          room={labelRoom}
          text={amount}
          bold
        />
      </g>
    );
  }
  if (dimension.kind === 'straight')
    return (
      <g class="measured">
        <path d={barred(dimension, mm)} />
        <LengthLabel {...dimension} mm={mm} labelRoom={labelRoom} middle={middle} amount={amount} />
      </g>
    );
  // How long they are together is said beside the drawing: next to one of them it would seem to be its own length.
  const parts = dimension.parts.filter(({ on }) => on === dimension.on);
  return (
    <g class="measured">
      {parts.map((part, i) => (
        <path key={i} d={'d' in part ? part.d : barred(part, mm)} />
      ))}
    </g>
  );
}

interface StraightLength {
  readonly from: TaughtPlace;
  readonly to: TaughtPlace;
}

const alongOf = ({ from, to }: StraightLength): number => Math.atan2(to.y - from.y, to.x - from.x);

/** A line with a bar at each end. */
function barred(length: StraightLength, mm: number): string {
  const { from, to } = length;
  const [across, reach] = [alongOf(length) + Math.PI / 2, 6 * mm];
  const bar = ({ x, y }: TaughtPlace): string =>
    `M${x + reach * Math.cos(across)} ${y + reach * Math.sin(across)}L${x - reach * Math.cos(across)} ${y - reach * Math.sin(across)}`;
  return `M${from.x} ${from.y}L${to.x} ${to.y}${bar(from)}${bar(to)}`;
}

/** How long it is, beside a line. */
function LengthLabel({
  from,
  to,
  mm,
  labelRoom,
  middle,
  amount,
}: StraightLength & Omit<MeasuredProps, 'dimension'>) {
  const x = (from.x + to.x) / 2;
  // Under what lies level, for the names of points stand over them.
  const lies = Math.abs(Math.sin(alongOf({ from, to }))) < 0.5;
  return (
    <Label
      x={x + 8 * mm * (x > middle ? -1 : 1)}
      y={(from.y + to.y) / 2 + (lies ? 1.3 * labelRoom.letter : -4 * mm)}
      ends={x > middle}
      room={labelRoom}
      text={amount}
      bold
    />
  );
}

/** An angle's two ways, and an arc between them halfway along the shorter. */
function sector({ at, from, to }: Extract<TaughtDimension, { kind: 'angle' }>) {
  const [one, other] = [from, to].map(({ x, y }) => ({
    along: Math.atan2(y - at.y, x - at.x),
    far: Math.hypot(x - at.x, y - at.y),
  })) as [Way, Way];
  const radius = Math.min(one.far, other.far) / 2;
  const turn = Math.atan2(Math.sin(other.along - one.along), Math.cos(other.along - one.along));
  const onArc = (along: number) => ({
    x: at.x + radius * Math.cos(along),
    y: at.y + radius * Math.sin(along),
  });
  const [begins, ends] = [onArc(one.along), onArc(other.along)];
  return {
    d: `M${from.x} ${from.y}L${at.x} ${at.y}L${to.x} ${to.y}M${begins.x} ${begins.y}A${radius} ${radius} 0 0 ${turn > 0 ? 1 : 0} ${ends.x} ${ends.y}`,
    middleOf: onArc(one.along + turn / 2),
  };
}

/** A way from the place of an angle: where it heads (radians) and how far it goes (mm). */
interface Way {
  readonly along: number;
  readonly far: number;
}
