import './opening';
import './editing';
import './language';
import './broken';
import './tables';
import './large';
