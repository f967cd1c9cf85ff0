const radiansPerDegree = Math.PI / 180

export const toRadians = (degrees: number): number => degrees * radiansPerDegree
export const toDegrees = (radians: number): number => radians / radiansPerDegree
export const sinDeg = (degrees: number): number => Math.sin(toRadians(degrees))
export const cosDeg = (degrees: number): number => Math.cos(toRadians(degrees))
export const tanDeg = (degrees: number): number => Math.tan(toRadians(degrees))
