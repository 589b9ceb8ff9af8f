package readback.assistant.probe;

import com.fazecast.jSerialComm.SerialPort;

/** The settings of a serial wire in the numbers of the library. */
final class SerialPorts {

    private SerialPorts() {}

    static int parity(Wire.Serial wire) {
        return switch (wire.parity()) {
            case 'E' -> SerialPort.EVEN_PARITY;
            case 'O' -> SerialPort.ODD_PARITY;
            default -> SerialPort.NO_PARITY;
        };
    }

    static int stopBits(Wire.Serial wire) {
        return wire.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
    }
}
