// Small turns as vectors: the axis times the angle, rad. Source: Rodrigues' formula (Hartley and Zisserman, A4.3.2).

import type { Rotation, Vec3 } from '@cairnmark/geometry';

export function rotationBy([x, y, z]: Vec3): Rotation {
  const angle = Math.hypot(x, y, z);
  // sin(a)/a and (1 - cos a)/a^2, by their series where a is too small to divide by.
  const first = angle < 1e-4 ? 1 - (angle * angle) / 6 : Math.sin(angle) / angle;
  const second = angle < 1e-4 ? 0.5 - (angle * angle) / 24 : (1 - Math.cos(angle)) / (angle * angle);
  const cosine = 1 - second * angle * angle;
  return [
    cosine + second * x * x,
    second * x * y - first * z,
    second * x * z + first * y,
    second * x * y + first * z,
    cosine + second * y * y,
    second * y * z - first * x,
    second * x * z - first * y,
    second * y * z + first * x,
    cosine + second * z * z,
  ];
}
