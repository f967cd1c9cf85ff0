import './charts.css'

export { ChartFigure, type FigurePorts, type FigureWords } from './view/chartFigure'
