/** Whether a place lies inside a closed chain of points (flat: x, y ...): how often a ray to the right crosses it. */
export const insideBorder =
  (border: Float64Array) =>
  (x: number, y: number): boolean => {
    let odd = false;
    const count = border.length;
    for (let i = 0, j = count - 2; i < count; j = i, i += 2) {
      const ay = border[i + 1] as number;
      const by = border[j + 1] as number;
      if (ay > y === by > y) continue;
      const ax = border[i] as number;
      const bx = border[j] as number;
      if (x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd;
    }
    return odd;
  };
