export { Announcer } from '../../page/announcer'
