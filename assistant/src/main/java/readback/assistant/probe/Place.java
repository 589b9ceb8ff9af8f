package readback.assistant.probe;

/** Where on its wire a channel's value is found. */
sealed interface Place {

    /** Records of this name in lines of SenML. */
    record Named(String name) implements Place {}

    /**
     * Registers of a Modbus unit.
     *
     * @param holding whether they are holding registers (function 3) and not input registers (function 4)
     * @param address as it goes over the wire, from 0 on
     */
    record Registers(int unitId, boolean holding, int address, RegisterFormat format) implements Place {}
}
