/** The audio processing of the WebRTC project (BSD licence), a frame at a time. */
@org.jspecify.annotations.NullMarked
package readback.assistant.webrtc;
