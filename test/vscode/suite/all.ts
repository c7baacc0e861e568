import './opening';
import './editing';
import './language';
import './features';
import './broken';
import './tables';
import './large';
