/** Standard gravity, m/s². Exact by definition (3rd CGPM, 1901). */
export const standardGravity = 9.80665
