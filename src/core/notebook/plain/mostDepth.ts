/** No notebook nests as deeply; what does is left to the library, which bounds it. */
export const mostDepth = 50
